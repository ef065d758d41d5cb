package bayproof.worksheet;

import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The pins of a vehicle's connectors, for a form to be filled at the vehicle. */
public final class PinForms {
    /**
     * One pin.
     *
     * @param id       connector and cavity
     * @param function what the vehicle sheet says it does
     * @param color    color of its wire by the vehicle sheet
     * @param use      what the plan joins to it; null where nothing
     */
    public record Pin(String id, Shown<String> function, Shown<String> color, Plan.PinUse use) {
        public String cavity() {
            return id.substring(id.indexOf('.') + 1);
        }

        /** What its function reads; null where the function is not known. */
        public PinFunctions.Function reads() {
            return PinFunctions.built().get(function.orElse(""));
        }
    }

    /** One connector with its pins. */
    public record Connector(String id, Shown<String> family, List<Pin> pins) {
    }

    private PinForms() {
    }

    /** Every connector of the vehicle sheet; a pin that only the plan names stands with its connector. */
    public static List<Connector> of(Job job) {
        List<Connector> connectors = new ArrayList<>();
        for (Vehicle.Connector connector : job.vehicle().connectors().values()) {
            List<Pin> pins = new ArrayList<>();
            connector.cavities().forEach((cavity, seen) -> {
                String id = connector.id() + "." + cavity;
                pins.add(new Pin(id, seen.function(), seen.color(), job.plan().pins().get(id)));
            });
            for (Map.Entry<String, Plan.PinUse> use : job.plan().pins().entrySet()) {
                if (use.getKey().startsWith(connector.id() + ".") && pins.stream().noneMatch(pin -> pin.id().equals(use.getKey()))) {
                    pins.add(new Pin(use.getKey(), use.getValue().function(), use.getValue().color(), use.getValue()));
                }
            }
            connectors.add(new Connector(connector.id(), connector.family(), pins));
        }
        return connectors;
    }
}
