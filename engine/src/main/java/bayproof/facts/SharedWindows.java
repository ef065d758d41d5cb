package bayproof.facts;

import bayproof.vocabulary.Window;
import bayproof.vocabulary.Windows;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Windows of a current that is given as a share of something, with the windows of that something. */
final class SharedWindows implements Windows {
    private final Windows ofCurrent;
    private final double perAmpere;
    private final List<Window> ofBase;

    /**
     * @param ofCurrent what the current rests on
     * @param perAmpere share that one ampere is
     * @param ofBase    what the base rests on, weighed in shares
     */
    SharedWindows(Windows ofCurrent, double perAmpere, List<Window> ofBase) {
        this.ofCurrent = ofCurrent;
        this.perAmpere = perAmpere;
        this.ofBase = ofBase;
    }

    @Override
    public List<Window> all() {
        List<Window> all = new ArrayList<>(ofCurrent.all());
        all.addAll(ofBase);
        return all;
    }

    @Override
    public List<Window> ranked() {
        List<Window> ranked = new ArrayList<>(ofCurrent.ranked().stream().map(window -> window.weighing(window.weighs() * perAmpere)).toList());
        ranked.addAll(ofBase);
        ranked.sort(Comparator.comparingDouble(Window::weighs).reversed().thenComparing(Window::limit));
        return ranked;
    }
}
