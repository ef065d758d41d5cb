/**
 * Sums of crossovers, enclosures and outer shapes: filters and their sums, third octaves, programme power, closed and vented boxes,
 * ports, and whether a shape fits a space. Pure functions over plain numbers in SI; they know nothing of plans, parts or rules.
 * Levels are in decibels.
 */
package bayproof.solve.acoustic;
