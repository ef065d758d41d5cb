package bayproof.splice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.ScalarTree;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Values put into cells: everything else of the table stays as it is. */
class CsvTextTest {
    private static String put(String table, String keys, Tree value) throws NotSpliced {
        return CsvText.put(table, "runs.csv", Arrays.asList(keys.split("/")), value);
    }

    private static ScalarTree word(String text) {
        return new ScalarTree(text, false, Trees.NOWHERE);
    }

    @Test
    void aCellIsFilledAndTheRestStays() throws Exception {
        String table = "\uFEFFid, size ,\"length [m]\",ends.from.tool\r\n# a, b\r\nfeed-1, 4 AWG ,,\"x, y\"\r\nfeed-2,8 AWG\r\n";
        assertEquals(table.replace("4 AWG ,,", "4 AWG ,0.45 m,"), put(table, "feed-1/length", word("0.45 m")));
        assertEquals(table.replace("feed-2,8 AWG", "feed-2,8 AWG,,small"), put(table, "feed-2/ends/from/tool", word("small")));
        assertEquals(table.replace("feed-2,8 AWG", "feed-2,8 AWG,\"1, 2\""), put(table, "feed-2/length", word("1, 2")));
    }

    @Test
    void aColumnThatIsNotThereIsAdded() throws Exception {
        assertEquals("id,size,metal\nfeed-1,4 AWG,copper\nfeed-2,8 AWG\n", put("id,size\nfeed-1,4 AWG\nfeed-2,8 AWG\n", "feed-1/metal", word("copper")));
    }

    @Test
    void aRowThatIsNotThereIsAddedAtTheEnd() throws Exception {
        assertEquals("id,who,when\none,lead,today\ntwo,,now\n", put("id,who,when\none,lead,today\n", "two/when", word("now")));
        assertEquals("id,who\r\none,lead\r\ntwo,\"a, b\"\r\n", put("id,who\r\none,lead", "two/who", word("a, b")));
    }

    @Test
    void whereSemicolonsPartTheCellsADecimalHasAComma() throws Exception {
        assertEquals("id;length\nfeed-1;0,45 m\n", put("id;length\nfeed-1;unknown\n", "feed-1/length", word("0.45 m")));
        assertEquals("id;along\nfeed-1;a b\n", put("id;along\nfeed-1;\n", "feed-1/along", new ListTree(List.of(word("a"), word("b")), Trees.NOWHERE)));
        assertEquals("id;along\nfeed-1;none\n", put("id;along\nfeed-1;\n", "feed-1/along", new ListTree(List.of(), Trees.NOWHERE)));
    }

    @Test
    void whatDoesNotFitIsLeftForTheHand() {
        assertThrows(NotSpliced.class, () -> put("id,length\nfeed-1,1 m\n", "feed-1/length", word("2 m")));
        assertThrows(NotSpliced.class, () -> put("id,length\n", "feed-3", word("2 m")));
    }
}
