package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A part without a kind adds to the part of its name in another book, whichever of both books is named first. */
class PartsAdditionTest {
    @TempDir
    private Path folder;

    private Job read(String own, String shared, String order) throws Exception {
        Files.writeString(folder.resolve("own.yaml"), "bayproof: 1\nkind: parts\nparts: " + own + "\n");
        Files.writeString(folder.resolve("shared.yaml"), "bayproof: 1\nkind: parts\nparts: " + shared + "\n");
        Path plan = Files.writeString(folder.resolve("plan.yaml"), "bayproof: 1\nparts: " + order + "\nitems: { a: { part: p } }\n");
        return JobReader.bind(JobFiles.read(plan, null));
    }

    @Test
    void whatItSaysGoesBefore() throws Exception {
        for (String order : new String[] {"[ own.yaml, shared.yaml ]", "[ shared.yaml, own.yaml ]"}) {
            Item.Speaker speaker = (Item.Speaker) read("{ p: { coils: { coil-2: 4 ohm } } }", "{ p: { kind: speaker, coils: { coil-1: 2 ohm, coil-2: unknown } } }",
                    order).items().get("a");
            assertEquals(2, speaker.coils().get("coil-1").orElse(0.0));
            assertEquals(4, speaker.coils().get("coil-2").orElse(0.0));
        }
    }

    @Test
    void twoWholePartsOrTwoAdditionsOfOneNameAreAMistake() {
        for (String own : new String[] {"{ p: { kind: speaker } }", "{ p: { coils: { c: 4 ohm } } }"}) {
            String shared = own;
            assertTrue(assertThrows(UnusableInput.class, () -> read(own, shared, "[ own.yaml, shared.yaml ]")).getMessage().contains("stands in two parts books"));
        }
    }

    @Test
    void anAdditionToNothingIsNoPart() {
        assertTrue(assertThrows(UnusableInput.class, () -> read("{ p: { coils: { c: 4 ohm } } }", "{}", "[ own.yaml, shared.yaml ]"))
                .getMessage().contains("nothing says what kind of thing"));
    }

    @Test
    void readAloneItIsNoPartOfItsOwn() throws Exception {
        Path own = Files.writeString(folder.resolve("own.yaml"), "bayproof: 1\nkind: parts\nparts: { p: { coils: { c: 4 ohm } } }\n");
        assertTrue(Sheet.read(own, "parts").entries().isEmpty());
    }
}
