/**
 * Sums of the sound side: speaker loads, meter readings, amplifier output and draw, signal levels, speaker wire, delay and
 * hearing. Pure functions over plain numbers in SI; they know nothing of plans, parts or rules. Levels are in decibels.
 */
package bayproof.solve.sound;
