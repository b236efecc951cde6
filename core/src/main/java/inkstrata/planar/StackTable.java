package inkstrata.planar;

import java.util.Arrays;

/** Numbers stacks of colours (packed sRGB, top first) in the order in which they are first seen; the bare one is 0. */
final class StackTable {
    static final int BARE = 0;

    private int[][] stacks = new int[16][];
    private int size;
    /** A stack's number plus one where its hash says, or in the next free place. */
    private int[] slots = new int[64];

    StackTable() {
        number(new int[0]);
    }

    int number(int[] colours) {
        int slot = slotOf(colours);
        return slots[slot] > 0 ? slots[slot] - 1 : append(colours, slot);
    }

    int size() {
        return size;
    }

    int[] colours(int number) {
        return stacks[number];
    }

    private int append(int[] colours, int slot) {
        if (size == stacks.length) {
            stacks = Arrays.copyOf(stacks, 2 * stacks.length);
        }
        stacks[size++] = colours;
        slots[slot] = size;
        if (4 * size > slots.length) {
            rehash();
        }
        return size - 1;
    }

    private void rehash() {
        slots = new int[2 * slots.length];
        for (int number = 0; number < size; number++) {
            slots[slotOf(stacks[number])] = number + 1;
        }
    }

    /** Where a stack is, or belongs. */
    private int slotOf(int[] colours) {
        int hash = Arrays.hashCode(colours) * 0x9E3779B1;
        int slot = (hash ^ hash >>> 15) & (slots.length - 1);
        while (slots[slot] != 0 && !Arrays.equals(stacks[slots[slot] - 1], colours)) {
            slot = (slot + 1) & (slots.length - 1);
        }
        return slot;
    }
}
