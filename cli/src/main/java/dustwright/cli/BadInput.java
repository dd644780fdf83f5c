package dustwright.cli;

/** Something the user can correct: said in plain words, without a trace. */
final class BadInput extends RuntimeException {
    BadInput(String message) {
        super(message);
    }
}
