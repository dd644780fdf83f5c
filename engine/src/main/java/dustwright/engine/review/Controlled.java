package dustwright.engine.review;

import dustwright.engine.interlock.Sequence;

/**
 * The control sequence whose interlocks the study counts, and whose it is.
 *
 * @param named as the study calls it: a file's name, or {@link #DEFAULT}
 */
public record Controlled(Sequence sequence, String named) {
    /** The one this program makes for a station to begin with: nobody has said that the plant's controller does the same. */
    public static final String DEFAULT = "the default sequence";
}
