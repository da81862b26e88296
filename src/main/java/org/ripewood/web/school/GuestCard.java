package org.ripewood.web.school;

import jakarta.ws.rs.core.UriInfo;
import org.ripewood.accounts.GuestLine;
import org.ripewood.accounts.ManyGuests;
import org.ripewood.pictures.QrCode;
import org.ripewood.web.kit.LinkFormat;

/** What is cut out and handed to a person: who they are here, and how they come in. */
record GuestCard(GuestLine line, LinkFormat link, QrCode code) {

    static GuestCard of(ManyGuests.Invited invited, UriInfo uri) {
        var link = LinkFormat.of(invited.link(), uri);
        return new GuestCard(invited.line(), link, QrCode.of(link.address()));
    }
}
