package bayproof.report.worksheet;

import java.util.List;

/** A part of a page that every form prints in its own way. */
public sealed interface Block {
    /** A blank to be filled by hand. */
    String BLANK = "........";
    /** A box to be ticked. */
    String BOX = "\u2610";

    /** What a group of lines is about. */
    record Heading(String text) implements Block {
    }

    /** A paragraph; its label, such as CAUTION, may be empty. */
    record Words(String label, String text) implements Block {
    }

    /**
     * A table.
     *
     * @param head one name a column
     * @param rows cells as texts; a line feed begins a new line of the cell
     * @param loud the column that is read from across the bench; -1 for none
     */
    record Grid(List<String> head, List<List<String>> rows, int loud) implements Block {
        public Grid {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
        }

        public Grid(List<String> head, List<List<String>> rows) {
            this(head, rows, -1);
        }
    }

    /**
     * One numbered step.
     *
     * @param number its number
     * @param say    what to do
     * @param lines  what has to be read, seen or ticked, one a line
     */
    record Step(int number, String say, List<String> lines) implements Block {
        public Step {
            lines = List.copyOf(lines);
        }
    }

    /** Fuse labels of one size. */
    record Labels(List<FuseLabel> labels, double widthMetres, double heightMetres) implements Block {
        public Labels {
            labels = List.copyOf(labels);
        }
    }
}
