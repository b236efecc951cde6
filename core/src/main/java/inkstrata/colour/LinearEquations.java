package inkstrata.colour;

/** Gaussian elimination with partial pivoting (G. H. Golub and C. F. Van Loan, Matrix Computations, section 3.4). */
final class LinearEquations {
    private LinearEquations() {}

    /**
     * The x for which the rows times x are the values.
     *
     * @param rows as many as values, each as long; changed here
     * @throws IllegalStateException if there is none, or more than one
     */
    static double[] solve(double[][] rows, double[] values) {
        int n = values.length;
        double[] x = values.clone();
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                pivot = Math.abs(rows[row][column]) > Math.abs(rows[pivot][column]) ? row : pivot;
            }
            if (rows[pivot][column] == 0) {
                throw new IllegalStateException("equations do not settle unknown " + column);
            }
            double[] swapped = rows[pivot];
            rows[pivot] = rows[column];
            rows[column] = swapped;
            double value = x[pivot];
            x[pivot] = x[column];
            x[column] = value;
            for (int row = column + 1; row < n; row++) {
                double factor = rows[row][column] / rows[column][column];
                for (int k = column; k < n && factor != 0; k++) {
                    rows[row][k] -= factor * rows[column][k];
                }
                x[row] -= factor * x[column];
            }
        }
        for (int row = n - 1; row >= 0; row--) {
            for (int k = row + 1; k < n; k++) {
                x[row] -= rows[row][k] * x[k];
            }
            x[row] /= rows[row][row];
        }
        return x;
    }
}
