package bayproof.splice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.UnusableInput;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Forms as people send them back. */
class FilledFormTest {
    private static FilledForm read(String text, String name) throws UnusableInput {
        return FilledForm.read(text.getBytes(StandardCharsets.UTF_8), name);
    }

    @Test
    void markdownIsReadByItsPathsAndBlanks() throws Exception {
        FilledForm form = read("""
                # Ask form
                - Filled in by
                  <sub>form.by</sub>
                  - Answer: apprentice ________
                - Length
                  <sub>runs.feed-1.length</sub>
                  - Answer [m, mm or in; tool: tape]: ___0.45 m____
                  - If you cannot know it: Answer: lay a string
                - Metal
                  <sub>`runs.feed-1.metal`</sub>
                  * Answer: ________________________
                """.replace("\n", "\r\n"), "form.md");
        assertEquals("apprentice", form.by());
        assertEquals("", form.when());
        assertEquals(1, form.blank());
        assertEquals("runs.feed-1.length", form.answers().get(0).path());
        assertEquals("0.45 m", form.answers().get(0).text());
        assertEquals(7, form.answers().get(0).at().line());
    }

    @Test
    void aTableIsReadByItsHeaderWhateverTheSpreadsheetMadeOfIt() throws Exception {
        FilledForm form = read("\uFEFFpath;what;answer\r\nform.by;;lead\r\nruns.feed-1.length;Length;\"0,45 m\"\r\nruns.feed-1.metal;Metal\r\n", "form.csv");
        assertEquals("lead", form.by());
        assertEquals("0.45 m", form.answers().get(0).text());
        assertEquals(3, form.answers().get(0).at().line());
        assertEquals(1, form.blank());
    }

    @Test
    void whatIsNoFormIsSaidToBeNone() {
        assertTrue(assertThrows(UnusableInput.class, () -> read("hello", "form.md")).getMessage().contains("no form"));
        assertTrue(assertThrows(UnusableInput.class, () -> read("a,b\n1,2\n", "form.csv")).getMessage().contains("no form"));
        assertThrows(UnusableInput.class, () -> FilledForm.read(new byte[] {(byte) 0xFF, (byte) 0xFE}, "form.md"));
    }
}
