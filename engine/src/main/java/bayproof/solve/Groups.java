package bayproof.solve;

import java.util.Arrays;

/** Which of a number of things belong together: each group is named by its lowest member. */
final class Groups {
    private final int[] parent;

    Groups(int count) {
        parent = new int[count];
        Arrays.setAll(parent, i -> i);
    }

    int of(int thing) {
        int root = thing;
        while (parent[root] != root) {
            parent[root] = parent[parent[root]];
            root = parent[root];
        }
        return root;
    }

    /** Puts the groups of both together; false if they were one group already. */
    boolean join(int one, int other) {
        int a = of(one);
        int b = of(other);
        parent[Math.max(a, b)] = Math.min(a, b);
        return a != b;
    }

    boolean areOne() {
        for (int i = 0; i < parent.length; i++) {
            if (of(i) != 0) {
                return false;
            }
        }
        return true;
    }
}
