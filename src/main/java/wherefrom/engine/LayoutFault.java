package wherefrom.engine;

/**
 * One thing that is wrong with a layout.
 *
 * @param field the field's name as it stands in the layout file
 * @param sentence what is wrong and what to do, for a person
 */
public record LayoutFault(String field, String sentence) {}
