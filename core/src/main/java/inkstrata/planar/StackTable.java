package inkstrata.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers stacks of colours (packed sRGB, top first) in the order in which they are first seen; the bare one is 0. */
final class StackTable {
    static final int BARE = 0;

    private final Map<Key, Integer> numbers = new HashMap<>();
    private final List<int[]> stacks = new ArrayList<>();

    StackTable() {
        number(new int[0]);
    }

    int number(int[] colours) {
        Key key = new Key(colours);
        Integer known = numbers.putIfAbsent(key, stacks.size());
        if (known != null) {
            return known;
        }
        stacks.add(colours);
        return stacks.size() - 1;
    }

    int size() {
        return stacks.size();
    }

    int[] colours(int number) {
        return stacks.get(number);
    }

    private record Key(int[] colours) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key that && Arrays.equals(colours, that.colours);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(colours);
        }
    }
}
