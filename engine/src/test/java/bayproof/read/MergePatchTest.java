package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The examples of RFC 7396, appendix A, as far as they patch an object. */
class MergePatchTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "{\"a\":\"b\"} | {\"a\":\"c\"} | {\"a\":\"c\"}",
        "{\"a\":\"b\"} | {\"b\":\"c\"} | {\"a\":\"b\",\"b\":\"c\"}",
        "{\"a\":\"b\"} | {\"a\":null} | {}",
        "{\"a\":\"b\",\"b\":\"c\"} | {\"a\":null} | {\"b\":\"c\"}",
        "{\"a\":[\"b\"]} | {\"a\":\"c\"} | {\"a\":\"c\"}",
        "{\"a\":\"c\"} | {\"a\":[\"b\"]} | {\"a\":[\"b\"]}",
        "{\"a\":{\"b\":\"c\"}} | {\"a\":{\"b\":\"d\",\"c\":null}} | {\"a\":{\"b\":\"d\"}}",
        "{\"a\":[{\"b\":\"c\"}]} | {\"a\":[\"1\"]} | {\"a\":[\"1\"]}",
        "{\"e\":null} | {\"a\":\"1\"} | {\"e\":null,\"a\":\"1\"}",
        "{\"x\":[\"1\",\"2\"]} | {\"x\":{\"a\":\"b\",\"c\":null}} | {\"x\":{\"a\":\"b\"}}",
        "{} | {\"a\":{\"bb\":{\"ccc\":null}}} | {\"a\":{\"bb\":{}}}"})
    void patchesAsTheStandardShows(String original, String patch, String result) {
        assertEquals(result, Written.text(MergePatch.apply(Written.json(original), Written.json(patch))));
        assertEquals(result, Written.text(MergePatch.apply(Written.yaml(original), Written.yaml(patch))));
    }
}
