package bayproof.splice;

import bayproof.read.Tree;
import java.nio.file.Path;
import java.util.List;

/**
 * One value to be put into one file.
 *
 * @param file  the file
 * @param keys  keys that lead to it there
 * @param kind  kind of file of the job whose tree it changes
 * @param place keys that lead to it in that tree
 * @param value the value; of a list that another word goes before, the whole list
 * @param first the word that goes before a list; null of any other value
 */
record Put(Path file, List<String> keys, String kind, List<String> place, Tree value, String first) {
    Put(Path file, List<String> keys, String kind, List<String> place, Tree value) {
        this(file, keys, kind, place, value, null);
    }
}
