/**
 * The job file: what the printmaker asks for, read strictly and checked.
 *
 * <p>YAML comes in; a {@link inkstrata.job.Job} with every default filled in goes out, or an error that names the
 * line and the nearest known key. Settings of plug-ins are kept as written; {@code inkstrata.plugin} checks them
 * against what each plug-in declares. Read {@link inkstrata.job.Job} first.
 */
package inkstrata.job;
