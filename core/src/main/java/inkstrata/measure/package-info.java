/**
 * Lengths, areas and the grid everything sits on.
 *
 * <p>In comes text such as {@code 400 mm} or {@code A3}; out go millimetres on the sheet as {@code double}, y down as
 * in SVG, and whole grid steps as {@code int}. Every tolerance of the shop has its name, unit and reason in {@link
 * inkstrata.measure.Tolerance}. Any room may knock; this one uses nothing but the JDK. Read
 * {@link inkstrata.measure.Grid} first.
 */
package inkstrata.measure;
