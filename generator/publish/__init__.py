"""Publishing: built aside, verified, compared, put in place in one step."""
