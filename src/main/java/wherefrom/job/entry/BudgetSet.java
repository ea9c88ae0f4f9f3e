package wherefrom.job.entry;

/**
 * The budget.
 *
 * @param currency the three letters of ISO 4217
 * @param contingencyPercent what is laid by for what is found later, of all costs
 */
public record BudgetSet(long cents, int contingencyPercent, String currency) implements JobEntry {}
