package wherefrom.print;

/**
 * One thing that is wrong with a label stock.
 *
 * @param field the field's name as it stands in the stock file
 * @param sentence what is wrong and what to do; names the field
 */
record StockFault(String field, String sentence) {}
