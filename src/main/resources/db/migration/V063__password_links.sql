-- The one link by which a person may choose a password, and who asked for one. A person has one
-- link at most, so that a newer one ends the older; a used one is gone.
create table password_link (
    person_id  bigint                      not null primary key references person (id),
    token_hash varchar(64)                 not null,
    kind       varchar(20)                 not null,
    expires_at timestamp(6) with time zone not null,
    constraint password_link_token_once unique (token_hash),
    constraint password_link_kind_known check (kind in ('INVITATION', 'RESET'))
);

create table password_wish (
    person_id bigint                      not null primary key references person (id),
    wished_at timestamp(6) with time zone not null
);
