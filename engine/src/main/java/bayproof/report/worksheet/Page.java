package bayproof.report.worksheet;

import java.util.List;

/**
 * A page to be taped up by itself.
 *
 * @param title what it is
 */
public record Page(String title, List<Block> blocks) {
    public Page {
        blocks = List.copyOf(blocks);
    }
}
