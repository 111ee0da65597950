package dapple.demo;

/** A page that the tour shows, and the key of what is said of it. */
public record DemoStop(String key, String path) {}
