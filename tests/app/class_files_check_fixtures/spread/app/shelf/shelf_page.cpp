// Not compiled: the check of class files must notice it.
void ShelfPage::show() {}
