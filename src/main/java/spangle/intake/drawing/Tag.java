package spangle.intake.drawing;

/**
 * One pair of lines of a DXF file.
 *
 * @param code what the value is
 * @param value as written, without outer blanks
 * @param line line of the code
 */
record Tag(int code, String value, int line) {}
