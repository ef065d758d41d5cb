package bayproof.start;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bayproof.read.TreeReader;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What was seen on another vehicle counts as seen on the same variant, and nothing else of its sheet changes. */
class SheetCopyTest {
    @Test
    void onlyTheWordsThatSayWhereItWasSeenChange() throws Exception {
        String sheet = "# this-car stays in a comment\r\nbayproof: 1\r\nkind: vehicle\r\ntitle: this-car, the blue one   # seen-on: this-car\r\n"
                + "places: { ä-stud: { zone: cargo, seen-on: this-car }, nut: { seen-on: \"this-car\", zone: this-car } }\r\n"
                + "pass-throughs:\r\n  firewall: { seen-on: document }\r\n  floor:\r\n    seen-on:   this-car   # with a lamp\r\n";
        String copy = "# this-car stays in a comment\r\nbayproof: 1\r\nkind: vehicle\r\ntitle: this-car, the blue one   # seen-on: this-car\r\n"
                + "places: { ä-stud: { zone: cargo, seen-on: same-variant }, nut: { seen-on: \"same-variant\", zone: this-car } }\r\n"
                + "pass-throughs:\r\n  firewall: { seen-on: document }\r\n  floor:\r\n    seen-on:   same-variant   # with a lamp\r\n";
        assertEquals(copy, SheetCopy.copied(sheet, TreeReader.read(sheet.getBytes(StandardCharsets.UTF_8), "sheet.yaml")));
    }
}
