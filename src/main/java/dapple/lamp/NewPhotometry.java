package dapple.lamp;

/**
 * A photometric file to be filed.
 *
 * @param content as it was given
 * @param shape what follows from it
 * @param personId who files it
 */
record NewPhotometry(String source, String content, LampShape.Measured shape, long personId) {}
