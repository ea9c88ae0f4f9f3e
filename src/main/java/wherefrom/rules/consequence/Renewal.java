package wherefrom.rules.consequence;

/** Why the parts that a change bans must be renewed, and so which new parts it bans too. */
public enum Renewal {
  /** They have worn in or suffered: a new part that never ran is as good as one bought later. */
  WEAR,
  /**
   * They are of a size that fits no more: new parts bought before are banned, unless of the size.
   */
  SIZE,
  /** They are of a sort that fits no more: new parts bought before are banned. */
  SORT
}
