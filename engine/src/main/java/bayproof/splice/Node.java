package bayproof.splice;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * A value of a YAML or JSON text with the places where it begins and ends, and how it is written. The tree that a job is
 * read into knows where a value begins only.
 *
 * @param from  where it begins
 * @param to    where it ends; of a map in block style where its last value ends
 * @param style how a scalar is written; null of a map or list
 * @param text  what a scalar says; null of a map or list
 * @param flow  whether a map or list stands in brackets
 * @param pairs keys and values of a map
 * @param items values of a list
 */
record Node(int from, int to, ScalarStyle style, String text, boolean flow, List<Pair> pairs, List<Node> items) {
    /** A key and what stands behind it. */
    record Pair(Node key, Node value) {
        int to() {
            return Math.max(key.to(), value.to());
        }
    }

    boolean isMap() {
        return pairs != null;
    }

    Pair pair(String key) {
        return pairs.stream().filter(pair -> key.equals(pair.key().text())).findFirst().orElse(null);
    }

    /** Whether it is a scalar that somebody has still to give: nothing, null, unknown or cannot-be-seen. */
    boolean isOpen() {
        return text != null && (style == ScalarStyle.PLAIN && (text.isEmpty() || text.equals("~") || text.equals("null"))
                || text.equals("unknown") || text.equals("cannot-be-seen"));
    }

    /**
     * The value that a text holds.
     *
     * @throws NotSpliced when it is no sound YAML
     */
    static Node of(String text) throws NotSpliced {
        try {
            Iterator<Event> events = new Parse(LoadSettings.builder().build()).parseString(text).iterator();
            Offsets offsets = new Offsets(text);
            while (events.hasNext()) {
                Event event = events.next();
                if (event instanceof ScalarEvent || event instanceof CollectionStartEvent) {
                    return node(event, events, offsets);
                }
            }
        } catch (YamlEngineException e) {
            throw new NotSpliced("the file is no sound YAML");
        }
        throw new NotSpliced("the file holds no keys");
    }

    private static Node node(Event event, Iterator<Event> events, Offsets offsets) throws NotSpliced {
        int from = offsets.of(event.getStartMark());
        if (event instanceof ScalarEvent scalar) {
            return new Node(from, offsets.of(event.getEndMark()), scalar.getScalarStyle(), scalar.getValue(), false, null, null);
        }
        if (!(event instanceof CollectionStartEvent begin)) {
            throw new NotSpliced("an alias stands in the file");
        }
        boolean flow = begin.getFlowStyle() == FlowStyle.FLOW;
        List<Pair> pairs = event instanceof MappingStartEvent ? new ArrayList<>() : null;
        List<Node> items = event instanceof SequenceStartEvent ? new ArrayList<>() : null;
        int end = from;
        Event next = events.next();
        while (next instanceof ScalarEvent || next instanceof CollectionStartEvent) {
            Node node = node(next, events, offsets);
            if (pairs != null) {
                Node value = node(events.next(), events, offsets);
                pairs.add(new Pair(node, value));
                end = pairs.get(pairs.size() - 1).to();
            } else {
                items.add(node);
                end = node.to();
            }
            next = events.next();
        }
        return new Node(from, flow ? offsets.of(next.getEndMark()) : end, null, null, flow, pairs, items);
    }
}
