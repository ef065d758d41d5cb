package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** An example job with plausible answers in place of what it leaves open. */
final class FilledExample {
    private FilledExample() {
    }

    /** Fills in the plan and the vehicle sheet of a job that was begun from an example with a vehicle. */
    static void fill(Path job) throws IOException {
        replace(job.resolve("plan.yaml"), "length: unknown", "length: 0.15 m", "owned-by: { kind: unknown, returns: unknown }", "owned-by: { kind: customer, returns: false }", "parked: unknown", "parked: 240 h", "structure: welded-body,", "structure: welded-body, body-return: 1 mohm,");
        Path plan = job.resolve("plan.yaml");
        Files.writeString(plan, Files.readString(plan).replace("# audio-inputs:", "audio-inputs:").replaceAll("(?m)^#(   (?:left|right): )", "$1"));
        Path vehicle = job.resolve("vehicle.yaml");
        replace(vehicle, "bay-left:   { between: [ battery-tray, firewall-left ], length: unknown", "bay-left:   { between: [ battery-tray, firewall-left ], length: 0.95 m",
                "length: unknown", "length: 2.4 m", "own-load: unknown", "own-load: 28 A", "standby-before: unknown", "standby-before: 16 mA", "start-dip: unknown", "start-dip: 8.8 V",
                "start-stop: unknown", "start-stop: no", "battery-sensor: unknown", "battery-sensor: none");
        String sheet = Files.readString(vehicle).replace("width: unknown, depth: unknown, top-depth: unknown", "width: 1.1 m, depth: 400 mm, top-depth: 390 mm")
                .replace("variant: unknown, factory-amplifier: unknown", "variant: R-210, factory-amplifier: none")
                .replace("carries: unknown, shaped: unknown, limits-itself: unknown", "carries: full, shaped: false, limits-itself: false")
                .replace("limit: unknown", "limit: 300 mA");
        Files.writeString(vehicle, sheet);
    }

    private static void replace(Path file, String... changes) throws IOException {
        String text = Files.readString(file);
        for (int i = 0; i < changes.length; i += 2) {
            String before = text;
            text = text.replace(changes[i], changes[i + 1]);
            assertNotEquals(before, text, changes[i]);
        }
        Files.writeString(file, text);
    }
}
