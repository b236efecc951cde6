package inkstrata.overprint;

import inkstrata.plan.Ink;
import inkstrata.plan.Prediction;
import inkstrata.plan.Sheet;
import java.util.Comparator;

/**
 * By what it is decided what runs on.
 *
 * @param sheet that is printed on
 * @param nearness compares inks by how near to the eye they are printed
 * @param prediction of what inks look like over each other
 * @param tolerance how far a colour may come out from the artwork's (CIEDE2000)
 * @param mostFilms over each other, that of the ink which shows included
 */
record Rules(Sheet sheet, Comparator<Ink> nearness, Prediction prediction, double tolerance, int mostFilms) {}
