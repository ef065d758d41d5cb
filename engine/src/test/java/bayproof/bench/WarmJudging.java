package bayproof.bench;

import bayproof.facts.FactBook;
import bayproof.judge.Court;
import bayproof.judge.Judgment;
import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Warm judging (facts and rules) of the whole jobs against a general YAML library reading the same plan.
 * Run after a build, in {@code engine}:
 * {@code java -cp "target/test-classes:target/classes:target/lib/*:<test libraries>" bayproof.bench.WarmJudging}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class WarmJudging {
    @Param({"street-show", "tour-van"})
    public String name;

    private Path plan;
    private JobFiles files;
    private Job job;
    private FactBook facts;
    private byte[] yaml;
    private final ObjectMapper mapper = new ObjectMapper(new YAMLFactory());

    @Setup
    public void read() throws Exception {
        plan = Jobs.plan(name);
        files = JobFiles.read(plan, null);
        job = JobReader.bind(files);
        facts = FactBook.of(job);
        yaml = Files.readAllBytes(plan);
    }

    @Benchmark
    public JsonNode generalYamlLibraryReadsThePlan() throws Exception {
        return mapper.readTree(yaml);
    }

    @Benchmark
    public Judgment factsAndRules() {
        return Court.judge(FactBook.of(job), job.limits());
    }

    @Benchmark
    public FactBook factsAlone() {
        return FactBook.of(job);
    }

    @Benchmark
    public Judgment rulesAlone() {
        return Court.judge(facts, job.limits());
    }

    @Benchmark
    public Evaluation bindFactsAndRules() throws Exception {
        return Evaluation.of(files);
    }

    @Benchmark
    public Evaluation wholeReview() throws Exception {
        return Evaluation.of(JobFiles.read(plan, null));
    }

    public static void main(String[] arguments) throws Exception {
        new Runner(new OptionsBuilder().include(WarmJudging.class.getSimpleName()).build()).run();
    }
}
