package wherefrom.workings.plan;

import wherefrom.workings.Inputs;

/** A named change: only the inputs that differ from now. */
public record WhatIf(String name, Inputs changes) {}
