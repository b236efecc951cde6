/**
 * What a job came to, for programs: one vocabulary for all verbs and files.
 *
 * <p>Plans, findings, notes and verdicts come in; maps go out whose keys have one order and one meaning wherever they appear, and JSON made
 * of them. What these keys hold is said by {@code common.schema.json} beside the classes. No file is opened here, and nothing is decided. Read
 * {@link inkstrata.report.Remarks} first.
 */
package inkstrata.report;
