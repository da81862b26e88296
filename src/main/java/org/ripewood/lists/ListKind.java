package org.ripewood.lists;

import java.util.List;

/** What a list is of, with its columns. */
public enum ListKind {
    PEOPLE(
            "name,login,roles",
            "course",
            """
            name,login,roles,course
            "Hedda Thornvale",hedda,student,Autumn course
            Ivo Ashgrove,ivo.ashgrove,student instructor,
            """),
    TREES(
            "label,species,keeper,site,came_on",
            "origin,note",
            """
            label,species,keeper,site,came_on,origin,note
            Maple of the long bed,acer_palmatum,hedda,Lath house,2021-03-14,seed,"Two trunks,
            one of them weak"
            """),
    READINGS(
            "tree,keeper,fact,value,observed_on",
            "height_mm,note",
            """
            tree,keeper,fact,value,observed_on,height_mm,note
            Maple of the long bed,hedda,shoot_extension_mm,220,2026-02-18,,
            Maple of the long bed,hedda,trunk_diameter_mm,32.5,2026-02-18,40,above the roots
            """),
    /** Work done before anybody gave it as a step. */
    WORKS(
            "tree,keeper,technique,done_on",
            "foliage_percent,root_percent,counts_as_done,note",
            """
            tree,keeper,technique,done_on,foliage_percent,root_percent,counts_as_done,note
            Maple of the long bed,hedda,trunk_chop,2023-02-18,70,,yes,at the nursery
            Maple of the long bed,hedda,feed_up,2024-05-02,,,,
            """),
    /** Branches of the design, with what was measured of them. */
    BRANCHES(
            "tree,keeper,name,role",
            "height_mm,bearing_degrees,entered_on,diameter_mm,trunk_mm,measured_on",
            """
            tree,keeper,name,role,height_mm,bearing_degrees,entered_on,diameter_mm,trunk_mm,measured_on
            Maple of the long bed,hedda,first left,primary,120,270,2024-03-01,9.5,41,2026-02-18
            """),
    CONTAINERS(
            "tree,keeper,kind,since",
            "description,litres",
            """
            tree,keeper,kind,since,description,litres
            Maple of the long bed,hedda,nursery,2021-03-14,,5
            Maple of the long bed,hedda,training,2024-03-01,wooden box,8
            """);

    private final String needed;
    private final String more;
    private final String sample;

    ListKind(String needed, String more, String sample) {
        this.needed = needed;
        this.more = more;
        this.sample = sample;
    }

    /** Columns that every list of the kind has. */
    public List<String> needed() {
        return List.of(needed.split(",", -1));
    }

    /** Columns that may be left out. */
    public List<String> more() {
        return List.of(more.split(",", -1));
    }

    /** A list to begin with. */
    public String sample() {
        return sample;
    }
}
