// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import org.benchlore.torque.Figures;

/** How the fasteners of a place lie. Places are numbered from 1. */
public sealed interface Layout {

    /** The most fasteners that a place may have. */
    int MOST = 200;

    /** How many there are. */
    int count();

    /** In words: {@code circle of 8}. */
    String words();

    /**
     * A circle, numbered clockwise from the top.
     *
     * @param count 3 to 64
     */
    record Circle(int count) implements Layout {
        private static final int LEAST_ROUND = 3;
        private static final int MOST_ROUND = 64;

        public Circle {
            Figures.within("number of fasteners in a circle", count, LEAST_ROUND, MOST_ROUND, "8");
        }

        @Override
        public String words() {
            return "circle of " + count;
        }
    }

    /**
     * A rectangle of rows and columns, numbered row by row from the left; a single row is one of them.
     *
     * @param rows 1 to 20
     * @param columns 1 to 20
     */
    record Grid(int rows, int columns) implements Layout {
        private static final int LONGEST_SIDE = 20;
        private static final String EXAMPLE = "2x5";

        public Grid {
            Figures.within("number of rows", rows, 1, LONGEST_SIDE, EXAMPLE);
            Figures.within("number of columns", columns, 1, LONGEST_SIDE, EXAMPLE);
            Figures.within("number of fasteners in all", (double) rows * columns, 2, MOST, EXAMPLE);
        }

        @Override
        public int count() {
            return rows * columns;
        }

        @Override
        public String words() {
            return rows == 1 ? "row of " + columns : rows + " rows of " + columns;
        }
    }

    /**
     * Fasteners that lie as they do; the numbers stand on the part or in the maker's picture.
     *
     * @param count 2 to 200
     */
    record Listed(int count) implements Layout {
        public Listed {
            Figures.within("number of fasteners", count, 2, MOST, "8");
        }

        @Override
        public String words() {
            return count + " as numbered by their own source";
        }
    }
}
