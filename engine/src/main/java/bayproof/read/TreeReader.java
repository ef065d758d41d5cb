package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.vocabulary.At;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML or JSON into a {@link Tree} with positions. Input is hostile until read: size, depth and the number of
 * values are limited, and what would make two readers disagree (anchors, aliases, tags, merge keys, repeated keys,
 * several documents) is refused by name.
 */
public final class TreeReader {
    /** Largest file accepted, in bytes; a full job takes about a hundredth of it. */
    static final int MOST_BYTES = 4 * 1024 * 1024;
    static final int MOST_DEPTH = 32;
    static final int MOST_VALUES = 200_000;

    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private int values;

    private TreeReader(String file) {
        this.file = file;
    }

    /**
     * Reads a file.
     *
     * @param path where it lies
     * @param name how messages call it
     * @throws UnusableInput when it cannot be read or is not sound YAML or JSON
     */
    public static MapTree read(Path path, String name) throws UnusableInput {
        return read(bytes(path, name), name);
    }

    /** Reads the bytes of a file; see {@link #read(Path, String)}. */
    public static MapTree read(byte[] bytes, String name) throws UnusableInput {
        String text = text(bytes, name, "Save it as UTF-8.");
        TreeReader reader = new TreeReader(name);
        Tree tree = name.endsWith(".json") ? reader.json(text) : reader.yaml(text);
        if (!reader.problems.isEmpty()) {
            throw new UnusableInput(reader.problems);
        }
        if (tree instanceof MapTree map) {
            return map;
        }
        throw refuse(name, 1, 1, "this file holds no keys.", "Begin it with \"bayproof: 1\".");
    }

    /** The bytes of a file, of which no more are read than is sound. */
    static byte[] bytes(Path path, String name) throws UnusableInput {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(MOST_BYTES + 1);
        } catch (IOException e) {
            throw refuse(name, 1, 1, "this file cannot be read (" + reason(e) + ").", "Check its name and place.");
        }
    }

    /** The text of a file without its byte order mark. */
    public static String text(byte[] bytes, String name, String fix) throws UnusableInput {
        if (bytes.length > MOST_BYTES) {
            throw refuse(name, 1, 1, "this file is larger than " + MOST_BYTES / 1024 / 1024 + " MiB.",
                    "A job's file is much smaller; check that it is the right one.");
        }
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw refuse(name, 1, 1, "this file is not UTF-8 text.", fix);
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static String reason(IOException e) {
        return e instanceof java.nio.file.NoSuchFileException ? "it is not there" : e.getClass().getSimpleName();
    }

    private static UnusableInput refuse(String file, int line, int column, String what, String fix) {
        return new UnusableInput(List.of(new Problem(new At(file, line, column), what, fix)));
    }

    // YAML

    private Tree yaml(String text) throws UnusableInput {
        LoadSettings settings = LoadSettings.builder().setLabel(file).setCodePointLimit(MOST_BYTES)
                .setParseComments(false).build();
        Iterator<Event> events = new Parse(settings).parseString(text).iterator();
        try {
            Tree tree = null;
            while (events.hasNext()) {
                Event event = events.next();
                if (event instanceof NodeEvent node) {
                    if (tree != null) {
                        problem(event, "a second document begins here.", "Keep one document in a file; remove \"---\".");
                        return tree;
                    }
                    tree = yamlNode(node, events, 0);
                }
            }
            return tree;
        } catch (TooMuch e) {
            throw new UnusableInput(problems);
        } catch (MarkedYamlEngineException e) {
            At at = e.getProblemMark().map(this::at).orElse(new At(file, 1, 1));
            throw refuse(file, at.line(), at.column(), "this is not sound YAML: " + oneLine(e.getProblem()) + ".",
                    "Check the indentation and the brackets just before this place.");
        } catch (ReaderException e) {
            String before = text.substring(0, Math.min(e.getPosition(), text.length()));
            throw refuse(file, 1 + (int) before.chars().filter(character -> character == '\n').count(), before.length() - before.lastIndexOf('\n'),
                    "a character that is no text stands here (code " + e.getCodePoint() + ").", "Take it out.");
        } catch (YamlEngineException e) {
            throw refuse(file, 1, 1, "this is not sound YAML: " + oneLine(e.getMessage()) + ".", "");
        }
    }

    private static String oneLine(String text) {
        return text == null ? "unreadable" : text.strip().replaceAll("\\s+", " ");
    }

    private Tree yamlNode(NodeEvent event, Iterator<Event> events, int depth) {
        count(event, depth);
        if (event instanceof AliasEvent alias) {
            problem(event, "an alias (*" + alias.getAlias() + ") stands here.", "Write the value itself.");
            return new ScalarTree("", false, at(event));
        }
        event.getAnchor().ifPresent(anchor -> problem((Event) event, "an anchor (&" + anchor + ") stands here.",
                "Remove it; every value is written where it belongs."));
        if (event instanceof ScalarEvent scalar) {
            scalar.getTag().ifPresent(tag -> tagProblem(event, tag));
            return new ScalarTree(scalar.getValue(), scalar.getScalarStyle() != ScalarStyle.PLAIN, at(event));
        }
        if (event instanceof SequenceStartEvent sequence) {
            sequence.getTag().ifPresent(tag -> tagProblem(event, tag));
            List<Tree> items = new ArrayList<>();
            for (Event next = events.next(); next instanceof NodeEvent node; next = events.next()) {
                items.add(yamlNode(node, events, depth + 1));
            }
            return new ListTree(items, at(event));
        }
        ((MappingStartEvent) event).getTag().ifPresent(tag -> tagProblem(event, tag));
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (Event next = events.next(); next instanceof NodeEvent keyNode; next = events.next()) {
            Tree key = yamlNode(keyNode, events, depth + 1);
            Tree value = yamlNode((NodeEvent) events.next(), events, depth + 1);
            if (key instanceof ScalarTree scalar) {
                put(entries, scalar.text(), key.at(), value);
            } else {
                problem(keyNode, "a key must be a plain word.", "Write the key as one word.");
            }
        }
        return new MapTree(entries, at(event));
    }

    private void put(Map<String, Entry> entries, String key, At keyAt, Tree value) {
        if (key.equals("<<")) {
            problems.add(new Problem(keyAt, "a merge key (<<) stands here.", "Write the values themselves."));
        } else if (entries.containsKey(key)) {
            problems.add(new Problem(keyAt, "\"" + key + "\" stands here a second time (first at line "
                    + entries.get(key).keyAt().line() + ").", "Keep one of them."));
        } else {
            entries.put(key, new Entry(key, keyAt, value));
        }
    }

    private void tagProblem(NodeEvent event, String tag) {
        problem(event, "a tag (" + tag.replace("tag:yaml.org,2002:", "!!") + ") stands here.", "Remove it.");
    }

    private void problem(Event event, String what, String fix) {
        problems.add(new Problem(at(event), what, fix));
    }

    private At at(Event event) {
        return event.getStartMark().map(this::at).orElse(new At(file, 1, 1));
    }

    private At at(Mark mark) {
        return new At(file, mark.getLine() + 1, mark.getColumn() + 1);
    }

    private void count(Event event, int depth) {
        limit(depth, () -> at(event));
    }

    private void limit(int depth, java.util.function.Supplier<At> at) {
        values++;
        if (values > MOST_VALUES || depth > MOST_DEPTH) {
            problems.add(new Problem(at.get(), values > MOST_VALUES ? "more than " + MOST_VALUES + " values stand in this file."
                    : "keys are nested deeper than " + MOST_DEPTH + " levels.", "Check that it is the right file."));
            throw new TooMuch();
        }
    }

    private static final class TooMuch extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TooMuch() {
            super(null, null, false, false);
        }
    }

    // JSON

    private Tree json(String text) throws UnusableInput {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            if (parser.nextToken() == null) {
                return null;
            }
            Tree tree = jsonValue(parser, 0);
            if (parser.nextToken() != null) {
                problems.add(new Problem(at(parser.currentTokenLocation()), "something follows the closing brace.", "Remove it."));
            }
            return tree;
        } catch (TooMuch e) {
            throw new UnusableInput(problems);
        } catch (JsonProcessingException e) {
            At at = Optional.ofNullable(e.getLocation()).map(this::at).orElse(new At(file, 1, 1));
            throw refuse(file, at.line(), at.column(), "this is not sound JSON: " + oneLine(e.getOriginalMessage()) + ".",
                    "Check the commas, quotes and braces just before this place.");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private Tree jsonValue(JsonParser parser, int depth) throws IOException {
        At at = at(parser.currentTokenLocation());
        limit(depth, () -> at);
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            Map<String, Entry> entries = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String key = parser.currentName();
                At keyAt = at(parser.currentTokenLocation());
                parser.nextToken();
                put(entries, key, keyAt, jsonValue(parser, depth + 1));
            }
            return new MapTree(entries, at);
        }
        if (token == JsonToken.START_ARRAY) {
            List<Tree> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(jsonValue(parser, depth + 1));
            }
            return new ListTree(items, at);
        }
        return new ScalarTree(parser.getText(), token == JsonToken.VALUE_STRING, at);
    }

    private At at(JsonLocation location) {
        return new At(file, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }
}
