package inkstrata.planar;

import java.util.Arrays;

/** A growing list of plain ints. */
final class Ints {
    private int[] values;
    private int size;

    Ints(int capacity) {
        values = new int[Math.max(4, capacity)];
    }

    void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1) + 4);
        }
        values[size++] = value;
    }

    /** Adds the values of an array from one place until before another. */
    void addAll(int[] from, int start, int end) {
        int longer = size + end - start;
        if (longer > values.length) {
            values = Arrays.copyOf(values, longer + (longer >> 1) + 4);
        }
        System.arraycopy(from, start, values, size, end - start);
        size = longer;
    }

    int get(int index) {
        return values[index];
    }

    void set(int index, int value) {
        values[index] = value;
    }

    int size() {
        return size;
    }

    int dropLast() {
        return values[--size];
    }

    void clear() {
        size = 0;
    }

    /** The list itself, longer than {@link #size()}; for reading only, until the next {@link #add}. */
    int[] raw() {
        return values;
    }

    int[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
