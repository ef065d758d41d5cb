package bayproof.splice;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;

/** Places in a text from the parser's marks, which count characters as people do. */
final class Offsets {
    private final String text;
    private int points;
    private int offset;

    Offsets(String text) {
        this.text = text;
    }

    /** The place of a mark. Marks come mostly one after the other, so each is counted on from the one before. */
    int of(Optional<Mark> mark) throws NotSpliced {
        int wanted = mark.orElseThrow(() -> new NotSpliced("the parser does not say where a value stands")).getIndex();
        offset = text.offsetByCodePoints(offset, wanted - points);
        points = wanted;
        return offset;
    }
}
