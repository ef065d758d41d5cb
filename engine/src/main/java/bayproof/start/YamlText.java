package bayproof.start;

/** Texts as they stand in a YAML file. */
final class YamlText {
    private YamlText() {
    }

    /** A text in double quotes; what could act on a terminal or break the line is left out. */
    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().filter(point -> !Character.isISOControl(point) && Character.getType(point) != Character.FORMAT
                && Character.getType(point) != Character.SURROGATE && point != 0x2028 && point != 0x2029).forEach(point -> {
                    if (point == '"' || point == '\\') {
                        quoted.append('\\');
                    }
                    quoted.appendCodePoint(point);
                });
        return quoted.append('"').toString();
    }
}
