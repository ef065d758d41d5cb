package bayproof.refit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Steps put in an order: the longest chain, and how long the whole takes with so many people. Of the steps that may begin, the one
 * with the longest chain behind it begins first; what is waited for takes nobody.
 *
 * @param chain       the longest chain, first step first; empty where the steps form a loop
 * @param chainSeconds its length
 * @param seconds     time until everything is done; NaN where the steps form a loop
 */
public record Schedule(List<String> chain, double chainSeconds, double seconds) {
    private static final String WAIT = "wait";

    public Schedule {
        chain = List.copyOf(chain);
    }

    static Schedule of(List<WorkStep> steps, int people, ToDoubleFunction<WorkStep> length) {
        Map<String, WorkStep> byId = new LinkedHashMap<>();
        steps.forEach(step -> byId.put(step.id(), step));
        List<String> order = sorted(byId);
        if (order.size() < byId.size()) {
            return new Schedule(List.of(), Double.NaN, Double.NaN);
        }
        Map<String, Double> tails = new LinkedHashMap<>();
        Map<String, String> next = new LinkedHashMap<>();
        for (int i = order.size() - 1; i >= 0; i--) {
            String id = order.get(i);
            double longest = 0;
            for (WorkStep later : steps) {
                if (later.after().contains(id) && tails.get(later.id()) > longest) {
                    longest = tails.get(later.id());
                    next.put(id, later.id());
                }
            }
            tails.put(id, longest + length.applyAsDouble(byId.get(id)));
        }
        List<String> chain = new ArrayList<>();
        String here = tails.entrySet().stream().max(Comparator.<Map.Entry<String, Double>>comparingDouble(Map.Entry::getValue).thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey).orElse(null);
        double whole = here == null ? 0 : tails.get(here);
        while (here != null) {
            chain.add(here);
            here = next.get(here);
        }
        return new Schedule(chain, whole, makespan(steps, byId, tails, people, length));
    }

    /** The steps, each behind those it waits for; shorter than all of them where they form a loop. */
    private static List<String> sorted(Map<String, WorkStep> byId) {
        List<String> order = new ArrayList<>();
        boolean found = true;
        while (found) {
            found = false;
            for (WorkStep step : byId.values()) {
                if (!order.contains(step.id()) && step.after().stream().allMatch(before -> order.contains(before) || !byId.containsKey(before))) {
                    order.add(step.id());
                    found = true;
                }
            }
        }
        return order;
    }

    private static double makespan(List<WorkStep> steps, Map<String, WorkStep> byId, Map<String, Double> tails, int people, ToDoubleFunction<WorkStep> length) {
        Map<String, Double> ends = new LinkedHashMap<>();
        double[] free = new double[Math.max(1, people)];
        List<WorkStep> left = new ArrayList<>(steps);
        while (!left.isEmpty()) {
            WorkStep step = left.stream().filter(one -> one.after().stream().allMatch(before -> ends.containsKey(before) || !byId.containsKey(before)))
                    .min(Comparator.<WorkStep>comparingDouble(one -> ready(one, ends)).thenComparingDouble(one -> -tails.get(one.id()))).orElseThrow();
            left.remove(step);
            double start = ready(step, ends);
            if (!step.kind().equals(WAIT)) {
                int who = 0;
                for (int i = 1; i < free.length; i++) {
                    who = free[i] < free[who] ? i : who;
                }
                start = Math.max(start, free[who]);
                free[who] = start + length.applyAsDouble(step);
            }
            ends.put(step.id(), start + length.applyAsDouble(step));
        }
        return ends.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    private static double ready(WorkStep step, Map<String, Double> ends) {
        return step.after().stream().mapToDouble(before -> ends.getOrDefault(before, 0.0)).max().orElse(0);
    }
}
