package wherefrom.job.money;

/**
 * Something to buy that carries no tag, such as the cam.
 *
 * @param what in words
 * @param reason the rule and what it follows from
 */
public record Purchase(String what, int pieces, String reason) {}
