package bayproof.start;

import bayproof.read.Seeds;
import bayproof.read.Sheet;
import bayproof.read.Tree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.UnusableInput;
import bayproof.vocabulary.At;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A job on a vehicle whose sheet was written for an earlier one. */
public final class SheetCopy {
    private static final String SEEN_ON = "seen-on";
    private static final String THIS_CAR = "this-car";
    private static final String SAME_VARIANT = "same-variant";
    private static final String BATTERY = "start-battery";

    private SheetCopy() {
    }

    /**
     * The files of the job: the sheet, in which what was seen on that vehicle counts as seen on the same variant, the parts
     * of the book that comes along which it names, and a plan of a few lines.
     *
     * @throws UnusableInput when the sheet cannot be used
     */
    public static Map<String, String> job(Path sheet) throws UnusableInput {
        MapTree tree = Sheet.read(sheet, "vehicle").tree();
        Map<String, String> files = new LinkedHashMap<>();
        files.put("plan.yaml", plan(tree));
        files.put("vehicle.yaml", copied(text(sheet), tree));
        String parts = PartsExcerpt.of(tree);
        if (parts.endsWith("parts:\n")) {
            files.computeIfPresent("plan.yaml", (name, plan) -> plan.replace("parts: [ parts.yaml ]\n", ""));
        } else {
            files.put("parts.yaml", parts);
        }
        return files;
    }

    private static String text(Path sheet) throws UnusableInput {
        try {
            return Files.readString(sheet, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the sheet was read a moment ago and cannot be read any more", e);
        }
    }

    /** The text with those words changed and no other. */
    static String copied(String text, MapTree tree) {
        List<At> places = new ArrayList<>();
        seenHere(tree, places);
        places.sort(Comparator.comparingInt(At::line).thenComparingInt(At::column).reversed());
        StringBuilder copy = new StringBuilder(text);
        for (At at : places) {
            int start = offset(text, at);
            int word = copy.indexOf(THIS_CAR, start);
            copy.replace(word, word + THIS_CAR.length(), SAME_VARIANT);
        }
        return copy.toString();
    }

    private static int offset(String text, At at) {
        int start = 0;
        for (int line = 1; line < at.line(); line++) {
            start = text.indexOf('\n', start) + 1;
        }
        return text.offsetByCodePoints(start, at.column() - 1);
    }

    private static void seenHere(Tree tree, List<At> places) {
        if (tree instanceof MapTree map) {
            map.entries().values().forEach(entry -> {
                if (entry.key().equals(SEEN_ON) && entry.value() instanceof ScalarTree word && word.text().equals(THIS_CAR)) {
                    places.add(word.at());
                }
                seenHere(entry.value(), places);
            });
        }
    }

    /** The plan of ten lines without its battery, which the sheet has. */
    private static String plan(MapTree sheet) {
        String battery = sheet.get("supply") instanceof MapTree supply && supply.get("sources") instanceof MapTree sources
                ? sources.entries().keySet().stream().filter(id -> id.contains("battery")).findFirst().orElse(BATTERY) : BATTERY;
        return Seeds.text("ten-lines/plan.yaml").replaceFirst("(?m)^  start-battery: .*\\R", "").replace(BATTERY + ".", battery + ".")
                .replaceFirst("(?m)^parked:", "vehicle: vehicle.yaml\nparts: [ parts.yaml ]\nparked:");
    }
}
