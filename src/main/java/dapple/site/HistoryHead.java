package dapple.site;

/**
 * What stands above a history.
 *
 * @param title what the thing is called
 * @param here the link of the navigation that it belongs to
 * @param back path of the thing's own page
 */
public record HistoryHead(String title, String here, String back) {}
