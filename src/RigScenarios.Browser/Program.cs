// A browser's program does nothing by itself: it waits for whoever calls its door.
return;
