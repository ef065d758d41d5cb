package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.read.Item;
import bayproof.units.Dimension;

/** What the returns of a job do to the body at one corner of the windows. */
final class Returns {
    private Returns() {
    }

    /** Volts between the point an item returns to and another one, at loud programme. */
    static Result offset(SolvedCorner corner, Item item, String landing, String point) {
        return corner.worst(Level.LOUD_PROGRAMME, one -> one == item, here -> told(here, Math.abs(here.point().voltsAcross(landing, point)),
                Dimension.VOLTAGE, "volts from " + landing + " to " + point));
    }

    /** The current that the job leads into the body, at full sine. */
    static Result led(SolvedCorner corner) {
        return corner.worst(Level.FULL_SINE, item -> true, here -> told(here, here.network().returnAmperes(here.point()), Dimension.CURRENT,
                "current of the job into the body"));
    }

    private static Result told(SolvedCorner.Settled here, double found, Dimension dimension, String what) {
        return new Result(found, null, () -> what + " = " + Model.print(found, dimension) + " (" + here.when() + ")");
    }
}
