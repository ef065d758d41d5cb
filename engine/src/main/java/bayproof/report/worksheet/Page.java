package bayproof.report.worksheet;

import java.util.List;

/**
 * A page to be taped up by itself.
 *
 * @param title what it is
 */
record Page(String title, List<Block> blocks) {
    Page {
        blocks = List.copyOf(blocks);
    }
}
