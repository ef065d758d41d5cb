package bayproof.read;

import java.util.ArrayList;
import java.util.List;

/** A series-parallel net of voice coils as it is written: {@code +} joins in series and binds before {@code |}, in parallel. */
public sealed interface CoilNet {

    record Coil(String terminal) implements CoilNet {
    }

    record Series(List<CoilNet> members) implements CoilNet {
    }

    record Parallel(List<CoilNet> members) implements CoilNet {
    }

    /** Every coil of the net in the order written; a coil written twice comes twice. */
    default List<String> coils() {
        if (this instanceof Coil coil) {
            return List.of(coil.terminal());
        }
        List<CoilNet> members = this instanceof Series series ? series.members() : ((Parallel) this).members();
        return members.stream().flatMap(member -> member.coils().stream()).toList();
    }

    /**
     * Reads a net.
     *
     * @throws IllegalArgumentException saying what is wrong, as a clause
     */
    static CoilNet parse(String text) {
        if (text.length() > 500) {
            throw new IllegalArgumentException("it is longer than 500 characters");
        }
        Parser parser = new Parser(text);
        CoilNet net = parser.parallel(0);
        parser.end();
        List<String> coils = net.coils();
        coils.stream().filter(coil -> coils.indexOf(coil) != coils.lastIndexOf(coil)).findFirst().ifPresent(coil -> {
            throw new IllegalArgumentException(coil + " stands in it twice");
        });
        return net;
    }

    /** Recursive descent over the text. */
    final class Parser {
        private final String text;
        private int at;

        private Parser(String text) {
            this.text = text;
        }

        private CoilNet parallel(int depth) {
            List<CoilNet> members = new ArrayList<>(List.of(series(depth)));
            while (take('|')) {
                members.add(series(depth));
            }
            return members.size() == 1 ? members.get(0) : new Parallel(List.copyOf(members));
        }

        private CoilNet series(int depth) {
            List<CoilNet> members = new ArrayList<>(List.of(single(depth)));
            while (take('+')) {
                members.add(single(depth));
            }
            return members.size() == 1 ? members.get(0) : new Series(List.copyOf(members));
        }

        private CoilNet single(int depth) {
            if (depth > 10) {
                throw new IllegalArgumentException("its brackets are nested too deep");
            }
            if (take('(')) {
                CoilNet inner = parallel(depth + 1);
                if (!take(')')) {
                    throw new IllegalArgumentException("a closing bracket is missing");
                }
                return inner;
            }
            int start = at;
            while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '-' || text.charAt(at) == '.')) {
                at++;
            }
            if (start == at) {
                throw new IllegalArgumentException("a coil is missing at character " + (at + 1));
            }
            return new Coil(text.substring(start, at));
        }

        private boolean take(char wanted) {
            while (at < text.length() && text.charAt(at) == ' ') {
                at++;
            }
            if (at < text.length() && text.charAt(at) == wanted) {
                at++;
                while (at < text.length() && text.charAt(at) == ' ') {
                    at++;
                }
                return true;
            }
            return false;
        }

        private void end() {
            if (at < text.length()) {
                throw new IllegalArgumentException("\"" + text.charAt(at) + "\" at character " + (at + 1) + " is not expected");
            }
        }
    }
}
