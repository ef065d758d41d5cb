package bayproof.start;

import bayproof.read.SharedTables;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The schemas of a job's files, laid beside them so that an editor checks and completes them wherever the folder goes. */
public final class JobSchemas {
    /** Folder of the schemas, in the folder of the job. */
    public static final String FOLDER = "schema/";
    private static final List<String> KINDS = List.of("plan", "vehicle", "parts");
    private static final String SUFFIX = ".schema.json";
    private static final String MARK = "# yaml-language-server: $schema=";

    private JobSchemas() {
    }

    /** The same files, each with the line that names its schema first, and the schemas themselves behind them. */
    public static Map<String, String> beside(Map<String, String> files) {
        Map<String, String> all = new LinkedHashMap<>();
        Map<String, String> schemas = new LinkedHashMap<>();
        files.forEach((name, text) -> {
            String kind = name.replaceAll("\\.yaml$", "");
            boolean known = KINDS.contains(kind);
            all.put(name, known ? named(FOLDER + kind + SUFFIX, text) : text);
            if (known) {
                schemas.put(FOLDER + kind + SUFFIX, SharedTables.written(FOLDER + kind + SUFFIX));
            }
        });
        all.putAll(schemas);
        return all;
    }

    /** A line that names a schema of another folder makes room. */
    private static String named(String schema, String text) {
        String own = text.startsWith(MARK) ? text.replaceFirst("\\A[^\\r\\n]*\\R?", "") : text;
        return MARK + schema + "\n" + own;
    }
}
