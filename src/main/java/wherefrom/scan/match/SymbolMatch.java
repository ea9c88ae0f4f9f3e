package wherefrom.scan.match;

import wherefrom.parts.TagCode;

/**
 * The symbol that fits a grid best.
 *
 * @param code of the best
 * @param issued whether it was issued or is only a relative
 * @param evidence the best one's score, in standard deviations of a chance score
 * @param lead evidence for the best against the runner-up, from the modules in which they differ
 */
public record SymbolMatch(TagCode code, boolean issued, double evidence, double lead) {}
