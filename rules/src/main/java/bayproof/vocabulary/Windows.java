package bayproof.vocabulary;

import java.util.List;

/** The windows a value rests on. */
public interface Windows {
    /** The windows by name of their limit. */
    List<Window> all();

    /** The same windows, the one that alone moves the value most first, each with how far; worked out when asked for. */
    List<Window> ranked();

    /** Windows of which none is weighed against another. */
    static Windows unweighed(List<Window> windows) {
        List<Window> fixed = List.copyOf(windows);
        return new Windows() {
            @Override
            public List<Window> all() {
                return fixed;
            }

            @Override
            public List<Window> ranked() {
                return fixed;
            }
        };
    }
}
