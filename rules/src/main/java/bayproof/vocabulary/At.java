package bayproof.vocabulary;

/**
 * Where a value stands in the files of a job.
 *
 * @param file   file name as the user gave it, or as another file refers to it
 * @param line   line, from 1
 * @param column column in characters, from 1
 */
public record At(String file, int line, int column) implements Comparable<At> {
    @Override
    public int compareTo(At other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        int byLine = Integer.compare(line, other.line);
        return byLine != 0 ? byLine : Integer.compare(column, other.column);
    }

    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}
