-- When whoever is signed in showed last that it is them, by their password; empty when they have not
-- since they signed in.
alter table sign_in_session add column confirmed_at timestamp(6) with time zone;
