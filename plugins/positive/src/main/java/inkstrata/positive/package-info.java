/**
 * Positive: one true-size film for each pull, black on clear, and {@code plan.json} beside them.
 *
 * <p>A separation comes in; SVG files go out whose user unit is one millimetre of the sheet and whose digits give every
 * vertex back exactly. All films of a set have the same size and the same register marks at the same places, outside the
 * picture. A film is as large as the sheet, or larger where the sheet leaves no room for marks, bar and label. For the
 * back of a sheet the picture is mirrored and the film says so.
 *
 * <p>What lies where is settled once for the set by {@link inkstrata.positive.FilmLayout}; {@link
 * inkstrata.positive.FilmSvg} then writes film after film. Read {@link inkstrata.positive.Positive} first; {@code
 * plugins/positive/docs/plan-json.md} describes the other file.
 */
package inkstrata.positive;
