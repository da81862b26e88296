package org.ripewood.firstlook;

/** How long ago something was, as far as people remember it. */
public enum LookAge {
    WEEKS("weeks", "Less than two months", 30),
    YEAR("year", "About a year", 365),
    YEARS("years", "About three years or more", 1095);

    private final String code;
    private final String label;
    private final int days;

    LookAge(String code, String label, int days) {
        this.code = code;
        this.label = label;
        this.days = days;
    }

    public String code() {
        return code;
    }

    public String label() {
        return label;
    }

    /** The days it stands for: about the middle of what people mean. */
    int days() {
        return days;
    }
}
