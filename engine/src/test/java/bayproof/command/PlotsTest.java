package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures of a job. */
class PlotsTest {
    @TempDir
    private Path folder;

    private Set<String> drawn(String into) throws Exception {
        Set<String> names = new TreeSet<>();
        try (Stream<Path> files = Files.list(folder.resolve(into))) {
            files.forEach(file -> names.add(file.getFileName().toString()));
        }
        return names;
    }

    @Test
    void theTourVanHasItsPictures() throws Exception {
        Reply reply = Main.run("sheet", Jobs.TOUR.toString(), "--plots", folder.resolve("plots").toString());
        assertEquals(0, reply.status(), reply.err());
        assertEquals(Set.of("response-amp-front-ch-3.svg", "response-amp-front-ch-4.svg", "enclosure-sub-box.svg", "impedance-amp-sub-ch-1.svg", "feed-volts.svg"), drawn("plots"));
        for (String name : drawn("plots")) {
            String svg = Files.readString(folder.resolve("plots").resolve(name));
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.newDocumentBuilder().parse(Files.newInputStream(folder.resolve("plots").resolve(name)));
            Matcher colors = Pattern.compile("(?:stroke|fill):\\s*(?:#([0-9a-fA-F]{6})|rgb\\((\\d+), ?(\\d+), ?(\\d+)\\))").matcher(svg);
            while (colors.find()) {
                boolean gray = colors.group(1) == null ? colors.group(2).equals(colors.group(3)) && colors.group(3).equals(colors.group(4))
                        : colors.group(1).substring(0, 2).equals(colors.group(1).substring(2, 4)) && colors.group(1).substring(2, 4).equals(colors.group(1).substring(4));
                assertTrue(gray, name + " is not black and white: " + colors.group());
            }
        }
    }

    @Test
    void aPictureThatIsThereIsNotWrittenOver() throws Exception {
        String into = folder.resolve("plots").toString();
        Main.run("sheet", Jobs.CLEAN.toString(), "--plots", into);
        Files.writeString(folder.resolve("plots/feed-volts.svg"), "mine");
        assertEquals(2, Main.run("sheet", Jobs.CLEAN.toString(), "--plots", into).status());
        assertEquals("mine", Files.readString(folder.resolve("plots/feed-volts.svg")));
    }

    @Test
    void whatLacksAFigureHasNoPicture() throws Exception {
        String plan = Jobs.changed(folder, "distance: 1.10 m, ", "");
        assertEquals(0, Main.run("sheet", plan, "--plots", folder.resolve("fewer").toString()).status());
        assertEquals(Set.of("response-amp-front-ch-2.svg", "enclosure-sub-box.svg", "impedance-amp-sub-ch-1.svg", "feed-volts.svg"), drawn("fewer"));
    }
}
