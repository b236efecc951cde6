package inkstrata.planar;

import java.util.Arrays;

/** Numbers grid points in the order in which they are first seen. */
final class PointTable {
    private int[] slots;
    private final Points points;

    PointTable(int expected) {
        int capacity = Integer.highestOneBit(Math.max(8, expected)) * 4;
        slots = new int[capacity];
        Arrays.fill(slots, -1);
        points = new Points(expected);
    }

    /** The point's number; a new one is appended, so it is new if {@link #size()} grew. */
    int number(int x, int y) {
        int mask = slots.length - 1;
        int slot = hash(x, y) & mask;
        while (slots[slot] >= 0) {
            int at = slots[slot];
            if (points.isAt(at, x, y)) {
                return at;
            }
            slot = (slot + 1) & mask;
        }
        int number = append(x, y);
        slots[slot] = number;
        if (2 * points.size() > slots.length) {
            rehash();
        }
        return number;
    }

    /** A new number for a point that is known to be seen for the first time and never looked up. */
    int append(int x, int y) {
        return points.append(x, y);
    }

    int x(int number) {
        return points.x(number);
    }

    int y(int number) {
        return points.y(number);
    }

    int size() {
        return points.size();
    }

    int[] xs() {
        return points.xs();
    }

    int[] ys() {
        return points.ys();
    }

    private void rehash() {
        int[] old = slots;
        slots = new int[old.length * 2];
        Arrays.fill(slots, -1);
        int mask = slots.length - 1;
        for (int at : old) {
            if (at >= 0) {
                int slot = hash(points.x(at), points.y(at)) & mask;
                while (slots[slot] >= 0) {
                    slot = (slot + 1) & mask;
                }
                slots[slot] = at;
            }
        }
    }

    private static int hash(int x, int y) {
        int h = x * 0x9E3779B1 + y * 0x85EBCA77;
        h ^= h >>> 15;
        h *= 0x2C1B3C6D;
        return h ^ h >>> 13;
    }
}
