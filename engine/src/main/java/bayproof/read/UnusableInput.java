package bayproof.read;

import java.util.List;
import java.util.stream.Collectors;

/** The files cannot be used; all mistakes found are named together, in the order of the files. */
public final class UnusableInput extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient List<Problem> problems;

    public UnusableInput(List<Problem> problems) {
        super(problems.stream().sorted().distinct().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = problems.stream().sorted().distinct().toList();
    }

    public List<Problem> problems() {
        return problems;
    }
}
