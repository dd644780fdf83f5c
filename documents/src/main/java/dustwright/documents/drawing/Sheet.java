package dustwright.documents.drawing;

import java.util.List;

/**
 * A drawing with what found no room on it.
 *
 * @param unlabelled ids of pieces whose label touched something wherever it was tried
 */
public record Sheet(Scene scene, List<String> unlabelled) {
    public Sheet {
        unlabelled = List.copyOf(unlabelled);
    }
}
