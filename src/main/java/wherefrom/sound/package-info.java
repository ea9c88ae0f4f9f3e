/** Cues as tones on the computer's loudspeaker. */
@NullMarked
package wherefrom.sound;

import org.jspecify.annotations.NullMarked;
