package inkstrata.planar;

import java.util.Arrays;

/** Numbers stacks of colours (packed sRGB, top first) in the order in which they are first seen; the bare one is 0. */
final class StackTable {
    static final int BARE = 0;

    private int[][] stacks = new int[16][];
    private int size;
    /** A stack's number plus one where its hash says, or in the next free place; and that hash beside it. */
    private int[] slots = new int[64];

    private int[] hashes = new int[64];

    StackTable() {
        number(new int[0]);
    }

    int number(int[] colours) {
        int hash = hash(colours);
        int slot = hash & (slots.length - 1);
        while (slots[slot] != 0) {
            if (hashes[slot] == hash && Arrays.equals(stacks[slots[slot] - 1], colours)) {
                return slots[slot] - 1;
            }
            slot = (slot + 1) & (slots.length - 1);
        }
        append(colours);
        put(slot, size, hash);
        if (4 * size > slots.length) {
            rehash();
        }
        return size - 1;
    }

    int size() {
        return size;
    }

    int[] colours(int number) {
        return stacks[number];
    }

    private void append(int[] colours) {
        if (size == stacks.length) {
            stacks = Arrays.copyOf(stacks, 2 * stacks.length);
        }
        stacks[size++] = colours;
    }

    private void put(int slot, int number, int hash) {
        slots[slot] = number;
        hashes[slot] = hash;
    }

    private void rehash() {
        int[] oldSlots = slots;
        int[] oldHashes = hashes;
        slots = new int[2 * oldSlots.length];
        hashes = new int[slots.length];
        for (int old = 0; old < oldSlots.length; old++) {
            if (oldSlots[old] != 0) {
                int slot = oldHashes[old] & (slots.length - 1);
                while (slots[slot] != 0) {
                    slot = (slot + 1) & (slots.length - 1);
                }
                put(slot, oldSlots[old], oldHashes[old]);
            }
        }
    }

    private static int hash(int[] colours) {
        int hash = Arrays.hashCode(colours) * 0x9E3779B1;
        return hash ^ hash >>> 15;
    }
}
