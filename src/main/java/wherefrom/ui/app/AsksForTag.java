package wherefrom.ui.app;

import wherefrom.parts.Part;

/** A screen where a part goes in that somebody has named, and whose tag nobody has read yet. */
public interface AsksForTag {

  /** Asks for the tag of the part: nothing goes in until it is read, or said to be gone. */
  void askFor(Part part);
}
