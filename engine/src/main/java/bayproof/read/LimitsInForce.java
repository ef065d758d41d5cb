package bayproof.read;

import bayproof.demand.Limits;
import bayproof.read.Tree.MapTree;
import java.nio.file.Path;

/** The named limits without a job: the default ones, or those with a shop's figures in their place. */
public final class LimitsInForce {
    private LimitsInForce() {
    }

    /**
     * The limits in force.
     *
     * @param shop file of a shop's own figures; null for the default limits alone
     * @throws UnusableInput when that file cannot be used; all mistakes are named together
     */
    public static Limits read(Path shop) throws UnusableInput {
        if (shop == null) {
            return LimitsReader.defaults();
        }
        Problems problems = new Problems();
        MapTree tree = TreeReader.read(shop, shop.toString());
        JobFiles.checkHead(tree, "limits", problems);
        Limits limits = LimitsReader.withShop(tree, problems);
        problems.throwIfAny();
        return limits;
    }
}
