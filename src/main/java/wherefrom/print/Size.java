package wherefrom.print;

import wherefrom.quantity.Length;

/** Width and height of a page or a label. */
record Size(Length width, Length height) {}
