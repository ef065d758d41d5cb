package bayproof.splice;

import bayproof.read.Address;
import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Turns what stands in a form into a value of a file. */
final class Values {
    private static final String HIDDEN = "cannot-be-seen";
    private static final String NONE = "none";

    private Values() {
    }

    /**
     * The value of an answer.
     *
     * @throws NotSpliced when it is none that could stand there
     */
    static Tree of(String text, Address address) throws NotSpliced {
        if (address.group()) {
            return group(text);
        }
        if (address.many() && !text.equals(HIDDEN)) {
            return list(text);
        }
        return new ScalarTree(text, false, Trees.NOWHERE);
    }

    private static Tree list(String text) {
        String inner = text.startsWith("[") && text.endsWith("]") ? text.substring(1, text.length() - 1) : text;
        List<Tree> words = Arrays.stream(inner.split("[,\\s]+")).filter(word -> !word.isEmpty() && !word.equals(NONE))
                .map(word -> (Tree) new ScalarTree(word, false, Trees.NOWHERE)).toList();
        return new ListTree(words, Trees.NOWHERE);
    }

    private static Tree group(String text) throws NotSpliced {
        if (text.equals(NONE)) {
            return new MapTree(Map.of(), Trees.NOWHERE);
        }
        if (text.startsWith("{")) {
            try {
                return TreeReader.read(text.getBytes(StandardCharsets.UTF_8), "answer.yaml");
            } catch (UnusableInput e) {
                throw NotSpliced.wrong("it cannot be read: " + e.problems().get(0).what().replaceAll("\\.$", ""));
            }
        }
        throw NotSpliced.wrong("keys belong here, written as { name: { key: value } }, or none");
    }
}
