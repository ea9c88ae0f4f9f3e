package wherefrom.job.entry;

/** Nobody knows any more which place the part came out of; its tag only says where it may go. */
public record SlotUnknown(int item, String reason) implements JobEntry {}
