package org.ripewood.platform.records;

import java.util.List;

/** What a room can tell of what people did, kind by kind, from the tables it keeps. */
public interface NewsDescriptions {

    List<NewsDescription> news();
}
