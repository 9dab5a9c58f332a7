// Not compiled: the check of class files must notice this line.
void ShelfPage::hide() {}
